# METADATA
# title: People stand too near a pressure test with gas
# description: |
#   Gas gives back in a burst what was put into it. The distance at which people are not hurt follows from its
#   energy, and is 30 m at least.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: tests
#   scope: [gas, distance_stated]
#   needs: [tests.distance_mm, tests.keep_off_mm]
#   message: "People keep {have_mm} off the test of {subject}; the energy of its gas asks for {need_mm}"
#   action: >-
#     Test with a liquid, with less gas in it or at a lower pressure, or keep people further off.
#   basis:
#     - document: ASME PCC-2
#       edition: "2008"
#       clause: "Article 5.1, Appendices II and III"
#       standing: published
package rules.pressure.gas_test_too_near

report contains {
	"subject": t.id,
	"case": "pressure-test",
	"have_mm": t.distance_mm,
	"need_mm": t.keep_off_mm,
} if {
	some t in input.tests
	t.gas
	t.distance_stated
	t.distance_mm < t.keep_off_mm
}
