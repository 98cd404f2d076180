# METADATA
# title: The joints of an LP-gas hose were tested below what the law asks of them
# description: |
#   The US LP-gas rule wants hose connections able to stay tight at 500 psig. A test at less does not
#   show that.
#   A hose behind a regulator has a rule of its own.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [carries_lpg, "!low_side", "regime=29 CFR 1910.110"]
#   needs: []
#   absent: [hoses.test_pressure_kpa]
#   message: "{part} was tested at {have_kpa}; the LP-gas rule wants connections that stay tight at {need_kpa}"
#   action: "Ask the assembler for a test of the connections at that pressure."
#   basis:
#     - document: 29 CFR 1910.110
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(9)(v)"
#       standing: published
package rules.inspection.lpg_joints_tested_too_low

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.test_pressure_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.110" in input.line.regimes
	some h in input.hoses
	h.carries_lpg
	not h.low_side
	h.test_pressure_kpa < _least
}

# 500 psig = 3447.4 kPa, rounded down like the figure it is compared with.
_least := 3447
