# METADATA
# title: An oil cargo hose is rated below what ship law asks
# description: |
#   The US rule for tank ships fixes a least working pressure for the cargo hose. It also wants the hose
#   to hold what the pump or its relief valve can give, which is judged for every line.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 32.50-30"]
#   needs: [hoses.rated_kpa]
#   message: "{part} has a working pressure of {have_kpa}; the tank ship rule asks for {need_kpa}"
#   action: "Fit a cargo hose with at least this working pressure."
#   basis:
#     - document: 46 CFR 32.50-30
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.pressure.below_oil_cargo_law

report contains {"subject": h.id, "part": h.id, "have_kpa": h.rated_kpa, "need_kpa": _least} if {
	"46 CFR 32.50-30" in input.line.regimes
	some h in input.hoses
	h.rated_kpa < _least
}

# 150 psi = 1034.2 kPa, rounded down like the rating it is compared with.
_least := 1034
