# METADATA
# title: The test of a relief device is overdue
# description: |
#   A device that has not been tested within its interval may be stuck, or open at another pressure than
#   is written on it.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: reliefs
#   scope: ["!on_vessel"]
#   needs: [reliefs.days_since_test, reliefs.test_interval_days]
#   message: "{part} was tested {have_days} ago; it is due every {need_days}"
#   action: >-
#     Test the device, or fit one with a valid test, and record the date and the pressure at which it
#     opened.
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(4)(iii)"
#       standing: published
#     - document: 40 CFR 68.73
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(3)"
#       standing: published
package rules.relief.test_overdue

report contains {
	"subject": r.id,
	"part": r.id,
	"have_days": r.days_since_test,
	"need_days": r.test_interval_days,
} if {
	some r in input.reliefs
	not r.on_vessel
	r.days_since_test > r.test_interval_days
}
