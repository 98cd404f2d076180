# METADATA
# title: A pressure test is recorded without its pressure
# description: |
#   The laws on test records want a description of the test. A date without the pressure does not say
#   what the hose has shown.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: ["regime=29 CFR 1910.119|33 CFR 156.170|40 CFR 68.73|46 CFR 151.04-5"]
#   needs: []
#   absent: [hoses.days_since_test, hoses.test_pressure_kpa]
#   message: "{part} has a test date, but not the pressure it was tested at"
#   action: "Read the test pressure in the record and write it in the line sheet, or test again."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(4)(iv)"
#       standing: published
#     - document: 40 CFR 68.73
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(4)"
#       standing: published
#     - document: 33 CFR 156.170
#       edition: "CFR 2015 annual edition"
#       clause: "(c)"
#       standing: published
#     - document: 46 CFR 151.04-5
#       edition: "CFR 2015 annual edition"
#       clause: "(j)"
#       standing: published
package rules.record.test_pressure_not_recorded

report contains {"subject": h.id, "part": h.id} if {
	some law in {"29 CFR 1910.119", "33 CFR 156.170", "40 CFR 68.73", "46 CFR 151.04-5"}
	law in input.line.regimes
	some h in input.hoses
	h.days_since_test >= 0

	# This is the fault.
	not h.test_pressure_kpa
}
