# METADATA
# title: A gas carrier hose was tested below one and a half times its working pressure
# description: |
#   The US rule for liquefied gas ships wants the test at one and a half times the working pressure or
#   more, at ambient temperature, and at no more than two fifths of the burst pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 154.562"]
#   needs: [hoses.rated_kpa, hoses.test_pressure_kpa]
#   message: >-
#     {part} was tested at {test_kpa} with a working pressure of {rated_kpa}; the gas carrier rule asks
#     for one and a half times that
#   action: "Have the hose tested as that law describes, and record it, before it is used."
#   basis:
#     - document: 46 CFR 154.562
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.inspection.test_below_gas_carrier_law

report contains {
	"subject": h.id,
	"part": h.id,
	"test_kpa": h.test_pressure_kpa,
	"rated_kpa": h.rated_kpa,
} if {
	"46 CFR 154.562" in input.line.regimes
	some h in input.hoses

	# The rounding of both figures never makes a test of exactly that pressure too low.
	2 * (h.test_pressure_kpa + 1) <= 3 * h.rated_kpa
}
