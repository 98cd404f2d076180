# METADATA
# title: The liquid of a pressure test can freeze in it
# description: |
#   Water that freezes bursts what it stands in, or blocks it so that the far end is not tested.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: tests
#   scope: ["!gas"]
#   needs: [tests.freezes_ck, tests.coldest_ck]
#   message: "{fluid} freezes at {have_ck}, and can get as cold as {need_ck} in the test of {subject}"
#   action: >-
#     Test in warmer weather, with warm liquid, or with one that does not freeze there.
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.4.1"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.test_liquid_freezes

report contains {
	"subject": t.id,
	"fluid": t.fluid,
	"case": "pressure-test",
	"have_ck": t.freezes_ck,
	"need_ck": t.coldest_ck,
} if {
	some t in input.tests
	not t.gas
	t.freezes_ck >= t.coldest_ck
}
