# METADATA
# title: The test of a hose was only a look
# description: |
#   The date of the last pressure test is of a visual inspection. A look finds what shows; a hose
#   whose tail has slipped or whose braid is thin inside may look sound.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: []
#   absent: [hoses.test_kind]
#   message: "The test of {part} was a visual inspection and no pressure test"
#   action: "Test the hose under pressure, enter that date, and keep the look under inspected."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.inspection.visual_taken_for_pressure_test

report contains {"subject": h.id, "part": h.id} if {
	some h in input.hoses
	h.test_kind == "visual"
}
