# METADATA
# title: The test of a regulator or breakaway coupling is overdue
# description: |
#   Whoever wrote an interval on the sheet relies on the test. A regulator past it may creep, a breakaway
#   may stay whole when it is pulled, or part too early.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: parts
#   scope: [test_dated]
#   needs: [parts.days_since_test, parts.test_interval_days]
#   message: "{part} was tested {have_days} ago; it is due every {need_days}"
#   action: "Test the part, or fit one with a valid test, and record the date before it is used."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(4)(iii)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.inspection.part_test_overdue

report contains {
	"subject": p.id,
	"part": p.id,
	"have_days": p.days_since_test,
	"need_days": p.test_interval_days,
} if {
	some p in input.parts
	p.test_dated
	p.days_since_test > p.test_interval_days
}
