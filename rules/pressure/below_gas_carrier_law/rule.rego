# METADATA
# title: A gas carrier hose is rated below what ship law asks
# description: |
#   The US rule for liquefied gas ships fixes a least working pressure for the cargo hose, however low
#   the pressure is on the day.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 154.560"]
#   needs: [hoses.rated_kpa]
#   message: "{part} has a working pressure of {have_kpa}; the gas carrier rule asks for {need_kpa}"
#   action: "Fit a cargo hose with at least this working pressure."
#   basis:
#     - document: 46 CFR 154.560
#       edition: "undated public copy"
#       clause: "whole section"
#       standing: published
package rules.pressure.below_gas_carrier_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least} if {
	"46 CFR 154.560" in input.line.regimes
	some h in input.hoses
	h.rated_kpa < _least
}

# 150 psig = 1034.2 kPa, rounded down like the rating it is compared with.
_least := 1034
