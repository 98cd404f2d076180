# METADATA
# title: A chemical cargo hose was tested below its working pressure
# description: |
#   The US rule for chemical cargo ships never lets the working pressure be more than the pressure of
#   the last test.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 153.940"]
#   needs: [hoses.rated_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {test_kpa} with a working pressure of {rated_kpa}; the ship rule asks for at
#     least that
#   action: "Have the hose tested again, or mark it down to the pressure of the last test."
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "limits of working pressure"
#       standing: published
package rules.inspection.test_below_chemical_cargo_law

report contains {
	"subject": h.id,
	"part": h.id,
	"test_kpa": h.test_pressure_kpa,
	"rated_kpa": h.rated_kpa,
} if {
	"46 CFR 153.940" in input.line.regimes
	some h in input.hoses

	# The rounding of both figures never makes a test of exactly that pressure too low.
	h.test_pressure_kpa + 1 <= h.rated_kpa
}
