# METADATA
# title: Nobody has said how far people keep from a pressure test with gas
# description: |
#   Gas gives back in a burst what was put into it. The distance follows from its energy; a barrier made for
#   it may stand in its place.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: [gas, "!distance_stated"]
#   needs: [tests.keep_off_mm]
#   message: "The gas in the test of {subject} asks for {keep_off_mm} to people or a barrier; none is stated"
#   action: "Test with a liquid, or keep everybody off and state the distance."
#   basis:
#     - document: ASME PCC-2
#       edition: "2008"
#       clause: "Article 5.1, Appendices II and III"
#       standing: published
package rules.pressure.gas_test_distance_not_stated

report contains {"subject": t.id, "case": "pressure-test", "keep_off_mm": t.keep_off_mm} if {
	some t in input.tests
	t.gas
	not t.distance_stated
}
