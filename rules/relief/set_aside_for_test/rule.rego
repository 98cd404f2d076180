# METADATA
# title: A relief device is kept out of the pressure test
# description: |
#   What was blanked off for a test has been forgotten before. Until it is back, nothing limits the line.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: tests
#   scope: [relief_isolated]
#   needs: []
#   message: "{part} is kept out of the pressure test of {run}: it is back in place before the line is used"
#   action: "Put it back, take the blanks out, and have a second person sign for it."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.relief.set_aside_for_test

report contains {"subject": t.id, "run": t.id, "part": t.relief_set_aside} if {
	some t in input.tests
	t.relief_isolated
}
