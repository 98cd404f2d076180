# METADATA
# title: A marine vapour hose is rated below what the law asks
# description: |
#   The US rule for vapour lines between vessel and shore fixes a least working pressure, although
#   vapour runs at almost none.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [carries_gas, "regime=33 CFR 154.2101"]
#   needs: [hoses.rated_kpa]
#   message: "{part} has a working pressure of {have_kpa}; the marine vapour rule asks for {need_kpa}"
#   action: "Fit a vapour hose with at least this working pressure."
#   basis:
#     - document: 33 CFR 154.2101
#       edition: "CFR 2015 annual edition"
#       clause: "(d)"
#       standing: published
package rules.pressure.vapour_hose_below_marine_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least} if {
	"33 CFR 154.2101" in input.line.regimes
	some h in input.hoses
	h.carries_gas
	h.rated_kpa < _least
}

# 5 psig = 34.5 kPa, rounded down like the rating it is compared with.
_least := 34
