# METADATA
# title: The joints of an ammonia hose were tested below what state law asks
# description: |
#   California wants the made-up connections of an ammonia hose tight at twice the working pressure. A
#   lower test does not show it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: [carries_ammonia, "regime=8 CCR 510"]
#   needs: [hoses.rated_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {test_kpa} with a working pressure of {rated_kpa}; the state law asks for tight
#     joints at twice that
#   action: "Ask the assembler for the test of the joints, or have it made."
#   basis:
#     - document: 8 CCR 510
#       edition: "undated public copy"
#       clause: "hose connections"
#       standing: published
package rules.inspection.state_ammonia_joints_tested_too_low

report contains {
	"subject": h.id,
	"part": h.id,
	"test_kpa": h.test_pressure_kpa,
	"rated_kpa": h.rated_kpa,
} if {
	"8 CCR 510" in input.line.regimes
	some h in input.hoses
	h.carries_ammonia

	# The rounding of both figures never makes a test of exactly that pressure too low.
	h.test_pressure_kpa + 1 <= 2 * h.rated_kpa
}
