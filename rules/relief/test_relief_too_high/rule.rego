# METADATA
# title: The relief device of a pressure test is set too high
# description: |
#   It is there to hold the test at its pressure. With gas it may open above the test pressure by a tenth of it,
#   and by 345 kPa at most; with liquid by a third, which is common practice.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: tests
#   scope: [relief_stated]
#   needs: [tests.test_kpa, tests.relief_over_kpa]
#   message: "The relief device of the test of {subject} opens {over_kpa} above it, which is too much"
#   action: "Set it lower, or take another."
#   basis:
#     - document: ASME B31.3
#       edition: ""
#       clause: "345.5.2"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.relief.test_relief_too_high

report contains {"subject": t.id, "case": "pressure-test", "over_kpa": t.relief_over_kpa} if {
	some t in input.tests
	t.relief_stated
	_too_high(t)
}

_too_high(t) if {
	t.gas
	t.relief_over_kpa > 345
}

_too_high(t) if {
	t.gas
	10 * t.relief_over_kpa > t.test_kpa
}

_too_high(t) if 3 * t.relief_over_kpa > t.test_kpa
