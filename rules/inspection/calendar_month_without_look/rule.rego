# METADATA
# title: A whole calendar month has passed without a look at a road delivery hose
# description: |
#   The US road rule counts calendar months, not thirty days: a look on the first of March and one on
#   the last of April are both in time. A month in which the hose was out of service owes none, which
#   only the site knows.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: hoses
#   scope: ["regime=49 CFR 180.416"]
#   needs: [hoses.days_since_inspection]
#   message: "{part} was last inspected on {inspected_day}, so the month before this one has no inspection"
#   action: >-
#     Inspect the hose before it is used. If it was out of service for that whole month, write so in its
#     record.
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(1)"
#       standing: published
package rules.inspection.calendar_month_without_look

report contains {"subject": h.id, "part": h.id, "inspected_day": looked} if {
	"49 CFR 180.416" in input.line.regimes
	some h in input.hoses

	# Further back the rule of the missed inspection speaks.
	h.days_since_inspection < 62
	looked := input.line.as_of_day - h.days_since_inspection
	_month(input.line.as_of_day) - _month(looked) > 1
}

_month(day) := (12 * date[0]) + date[1] if date := time.date(day * _day_ns)

_day_ns := 86400000000000
