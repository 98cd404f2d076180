# METADATA
# title: A waterfront gas hose was tested below what the law asks
# description: |
#   The US rule for liquefied hazardous gas at the waterfront wants the test at 1.1 times the working
#   pressure, held for half an hour.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 127.1407|33 CFR 127.1102"]
#   needs: [hoses.rated_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {test_kpa} with a working pressure of {rated_kpa}; {law} asks for 1.1 times
#     that
#   action: "Have the hose tested as that law describes, and record it, before it is used."
#   basis:
#     - document: 33 CFR 127.1407
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
#     - document: 33 CFR 127.1102
#       edition: "CFR 2015 annual edition"
#       clause: "(a)"
#       standing: published
package rules.inspection.test_below_waterfront_gas_law

report contains {
	"subject": h.id,
	"part": h.id,
	"law": law,
	"test_kpa": h.test_pressure_kpa,
	"rated_kpa": h.rated_kpa,
} if {
	some law in {"33 CFR 127.1407", "33 CFR 127.1102"}
	law in input.line.regimes
	some h in input.hoses

	# The rounding of both figures never makes a test of exactly that pressure too low.
	10 * (h.test_pressure_kpa + 1) <= 11 * h.rated_kpa
}
