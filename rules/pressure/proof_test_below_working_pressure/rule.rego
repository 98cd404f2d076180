# METADATA
# title: A hose was tested below its working pressure
# description: |
#   A test below the working pressure says nothing about whether the hose holds it. Leak tests at lower
#   pressure are useful but do not replace a proof test.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: []
#   needs: [hoses.rated_kpa]
#   absent: [hoses.test_pressure_kpa]
#   message: "{part} was tested at {have_kpa}, below its working pressure of {need_kpa}"
#   action: >-
#     Have the hose proof tested at or above its working pressure, as its standard asks, before it is used
#     at that pressure.
#   basis:
#     - document: 46 CFR 153.940
#       edition: "CFR 2015 annual edition"
#       clause: "limits of working pressure"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.proof_test_below_working_pressure

report contains {"subject": h.id, "part": h.id, "have_kpa": h.test_pressure_kpa, "need_kpa": h.rated_kpa} if {
	some h in input.hoses
	h.test_pressure_kpa < h.rated_kpa
}
