# METADATA
# title: A relief device opens in the pressure test
# description: |
#   A relief device that stays in the line lets the test off, and a gag on it may be forgotten. It is taken
#   out or blanked off for the test, and put back before the line is used.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: test_items
#   scope: ["what=relief"]
#   needs: [test_items.rated_kpa, test_items.test_kpa]
#   message: "{part} opens at {have_kpa}, and the test of {run} goes to {need_kpa}"
#   action: >-
#     Take it out or blank it off for the test, say so under isolated, and put it back before use.
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.3.4"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.relief.opens_in_test

report contains {
	"subject": i.id,
	"part": i.part,
	"run": i.run,
	"case": "pressure-test",
	"have_kpa": i.rated_kpa,
	"need_kpa": i.test_kpa,
} if {
	some i in input.test_items
	i.what == "relief"
	i.rated_kpa <= i.test_kpa
}
