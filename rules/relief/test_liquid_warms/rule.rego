# METADATA
# title: The liquid of a pressure test can warm, and nothing lets it out
# description: |
#   Liquid that is shut in at test pressure gains several bar for each degree it warms. Left standing until
#   the sun comes out, a test bursts what it should prove.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: ["!gas", "!relief_stated"]
#   needs: [tests.test_kpa, tests.warmed_kpa]
#   message: "The test of {subject} goes to {have_kpa}; shut in and warmed its liquid can reach {need_kpa}"
#   action: "Put a relief device on the test and state it, or let the pressure off before anybody leaves."
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.2.1"
#       standing: recalled
#     - document: API Std 521
#       edition: "5th ed. 2007"
#       clause: "5.14.4"
#       standing: published
package rules.relief.test_liquid_warms

report contains {
	"subject": t.id,
	"case": "pressure-test",
	"have_kpa": t.test_kpa,
	"need_kpa": t.warmed_kpa,
} if {
	some t in input.tests
	not t.gas
	not t.relief_stated
	t.test_kpa < t.warmed_kpa
}
