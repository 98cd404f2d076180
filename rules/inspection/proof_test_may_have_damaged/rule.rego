# METADATA
# title: A hose was tested so high that the test may have damaged it
# description: |
#   The US rules for liquefied gas ships and barges keep the test at two fifths of the burst pressure.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=46 CFR 38.15-5|46 CFR 154.562"]
#   needs: [hoses.test_pressure_kpa, hoses.burst_kpa]
#   message: "{part} was tested at {test_kpa}, above two fifths of its burst pressure of {burst_kpa}"
#   action: "Set the hose aside and ask its maker. Test the next one within both limits."
#   basis:
#     - document: 46 CFR 38.15-5
#       edition: "undated public copy"
#       clause: "whole section"
#       standing: published
#     - document: 46 CFR 154.562
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.inspection.proof_test_may_have_damaged

report contains {
	"subject": h.id,
	"part": h.id,
	"test_kpa": h.test_pressure_kpa,
	"burst_kpa": h.burst_kpa,
} if {
	_gas_ship
	some h in input.hoses

	# At most two fifths, written without a fraction.
	5 * h.test_pressure_kpa > 2 * h.burst_kpa
}

_gas_ship if "46 CFR 38.15-5" in input.line.regimes

_gas_ship if "46 CFR 154.562" in input.line.regimes
