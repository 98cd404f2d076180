# METADATA
# title: The joints of an oxy-fuel hose were tested below what the law asks of them
# description: |
#   The US welding rule wants hose connections able to stay tight at twice the normal pressure, and at
#   300 psi at least, tested with oil-free air or an inert gas.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: ["regime=29 CFR 1910.253"]
#   needs: []
#   absent: [fluids.duty_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {have_kpa}; the welding rule wants connections that stay tight at {need_kpa}
#   action: "Have the connections tested at that pressure with oil-free air or nitrogen."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(e)(5)(v)"
#       standing: published
package rules.inspection.oxyfuel_joints_tested_too_low

report contains {
	"subject": h.id,
	"part": h.id,
	"have_kpa": h.test_pressure_kpa,
	"need_kpa": _least,
} if {
	"29 CFR 1910.253" in input.line.regimes
	some h in input.hoses
	h.test_pressure_kpa < _least
}

# 300 psi = 2068.4 kPa, rounded down like the figure it is compared with.
_least := max(_doubled | {2068})

_doubled := {twice | some f in input.fluids; twice := 2 * f.duty_kpa}
