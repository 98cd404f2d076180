# METADATA
# title: A pressure test stays below the pressure of use
# description: |
#   Such a test finds leaks, but says nothing about whether the line holds what it is used at.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: []
#   needs: [tests.test_kpa, tests.working_kpa]
#   message: "The test of {subject} goes to {have_kpa}, and the line sees {need_kpa} in use"
#   action: "Test at the pressure of use at least, or call it what it is: a leak test."
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.4.2 and 345.5.4"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.test_below_working

report contains {
	"subject": t.id,
	"case": "pressure-test",
	"have_kpa": t.test_kpa,
	"need_kpa": t.working_kpa,
} if {
	some t in input.tests
	t.test_kpa < t.working_kpa
}
