# METADATA
# title: What a pressure test leaves behind can freeze
# description: |
#   Liquid stays in low points, valve bodies and hoses after a test. In the first frost it bursts them.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: ["!gas", "!dried"]
#   needs: [tests.freezes_ck, tests.place_ck]
#   message: "{fluid} left in {subject} after the test freezes at {freezes_ck}; the place can get to {place_ck}"
#   action: "Let the liquid out, dry the line, and say so under dried."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.test_liquid_left_in_frost

report contains {
	"subject": t.id,
	"fluid": t.fluid,
	"place_ck": t.place_ck,
	"freezes_ck": t.freezes_ck,
} if {
	some t in input.tests
	not t.gas
	not t.dried
	t.freezes_ck >= t.place_ck
}
