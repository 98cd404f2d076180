# METADATA
# title: A marine vapour hose has more resistance than the law allows
# description: |
#   Vapour and air in this hose may be able to burn. The US rule limits its resistance from end to end,
#   whatever its grade.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_gas, carries_flammable, "regime=33 CFR 154.2101"]
#   needs: [hoses.electrical_grade, hoses.resistance_ohm]
#   message: "{part} measures {have_ohm} from end to end; the marine vapour rule allows {need_ohm}"
#   action: "Repair or replace the hose, and measure it again."
#   basis:
#     - document: 33 CFR 154.2101
#       edition: "CFR 2015 annual edition"
#       clause: "(d)"
#       standing: published
package rules.static.vapour_hose_resistance_above_law

report contains {"subject": h.id, "part": h.id, "have_ohm": h.resistance_ohm, "need_ohm": _most_ohm} if {
	"33 CFR 154.2101" in input.line.regimes
	some h in input.hoses
	h.carries_gas
	h.carries_flammable
	h.electrical_grade in {"M", "Ohm", "M/T", "Ohm/T", "none"}
	h.resistance_ohm > _most_ohm
}

_most_ohm := 10000
