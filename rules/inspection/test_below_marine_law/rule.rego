# METADATA
# title: A marine hose was tested below one and a half times its working pressure
# description: |
#   The US rules for oil and hazardous material between vessel and shore, and for barges, want the test
#   at one and a half times the working pressure, with the hose full of liquid at rest.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 156.170|33 CFR 154.500|46 CFR 151.04-5"]
#   needs: [hoses.rated_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {test_kpa} with a working pressure of {rated_kpa}; {law} asks for one and a
#     half times that
#   action: "Have the hose tested as that law describes, and record it, before it is used."
#   basis:
#     - document: 33 CFR 156.170
#       edition: "CFR 2015 annual edition"
#       clause: "(c)(1), (c)(4)"
#       standing: published
#     - document: 46 CFR 151.04-5
#       edition: "CFR 2015 annual edition"
#       clause: "(j)"
#       standing: published
package rules.inspection.test_below_marine_law

report contains {
	"subject": h.id,
	"part": h.id,
	"law": law,
	"test_kpa": h.test_pressure_kpa,
	"rated_kpa": h.rated_kpa,
} if {
	some law in {"33 CFR 156.170", "33 CFR 154.500", "46 CFR 151.04-5"}
	law in input.line.regimes
	some h in input.hoses

	# The rounding of both figures never makes a test of exactly that pressure too low.
	2 * (h.test_pressure_kpa + 1) <= 3 * h.rated_kpa
}
