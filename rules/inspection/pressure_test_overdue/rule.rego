# METADATA
# title: The pressure test of a hose is overdue
# description: |
#   The interval is the shorter of the maker's and the site's. A hose past it may have weakened unseen.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.days_since_test, hoses.test_interval_days]
#   message: "{part} was pressure-tested {have_days} ago; it is due every {need_days}"
#   action: "Test the hose and record pressure, date and result before it is used."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(4)(iii)"
#       standing: published
#     - document: 40 CFR 68.73
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(3)"
#       standing: published
package rules.inspection.pressure_test_overdue

report contains {
	"subject": h.id,
	"part": h.id,
	"have_days": h.days_since_test,
	"need_days": h.test_interval_days,
} if {
	some h in input.hoses
	h.days_since_test > h.test_interval_days
}
