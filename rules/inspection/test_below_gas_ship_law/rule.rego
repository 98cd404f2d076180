# METADATA
# title: A gas ship hose was tested below twice its working pressure
# description: |
#   The US rule for liquefied flammable gas on ships wants a new hose tested at twice its working
#   pressure or more, and at no more than two fifths of its burst pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 38.15-5"]
#   needs: [hoses.rated_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {test_kpa} with a working pressure of {rated_kpa}; the ship rule asks for twice
#     that
#   action: >-
#     Ask the hose maker for the test record of the new hose. Do not test an old hose higher without its
#     maker.
#   basis:
#     - document: 46 CFR 38.15-5
#       edition: "undated public copy"
#       clause: "whole section"
#       standing: published
package rules.inspection.test_below_gas_ship_law

report contains {
	"subject": h.id,
	"part": h.id,
	"test_kpa": h.test_pressure_kpa,
	"rated_kpa": h.rated_kpa,
} if {
	"46 CFR 38.15-5" in input.line.regimes
	some h in input.hoses

	# The rounding of both figures never makes a test of exactly that pressure too low.
	h.test_pressure_kpa + 1 <= 2 * h.rated_kpa
}
