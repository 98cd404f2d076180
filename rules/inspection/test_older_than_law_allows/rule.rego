# METADATA
# title: The pressure test of a hose is older than the law allows
# description: |
#   Some laws fix the interval whatever the site chose. The strictest of those named counts, counted in
#   days to the short side. The waterfront rule also wants a test in each calendar year, which this does
#   not count.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: ["regime=33 CFR 127.1102|33 CFR 127.1407|33 CFR 154.500|33 CFR 156.170|46 CFR 151.04-5|49 CFR 180.416"]
#   needs: [hoses.days_since_test]
#   message: "{part} was pressure-tested {have_days} ago; {law} allows {need_days}"
#   action: "Test the hose as that law describes, and record it, before it is used."
#   basis:
#     - document: 33 CFR 156.170
#       edition: "CFR 2015 annual edition"
#       clause: "(f)(1)"
#       standing: published
#     - document: 33 CFR 127.1407
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
#     - document: 46 CFR 151.04-5
#       edition: "CFR 2015 annual edition"
#       clause: "(j)"
#       standing: published
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(e)"
#       standing: published
package rules.inspection.test_older_than_law_allows

report contains {
	"subject": h.id,
	"part": h.id,
	"law": concat(", ", laws),
	"have_days": h.days_since_test,
	"need_days": longest,
} if {
	longest := min({days | days := _longest_days[input.line.regimes[_]]})
	laws := {law | some law in input.line.regimes; _longest_days[law] == longest}
	some h in input.hoses
	h.days_since_test > longest
}

# 33 CFR 156.170(f)(1) and 49 CFR 180.416(e): a year. 46 CFR 151.04-5(j): two years.
# 33 CFR 127.1407: 15 months, which is never less than 454 days.
_longest_days := {
	"33 CFR 127.1102": 454,
	"33 CFR 127.1407": 454,
	"33 CFR 154.500": 365,
	"33 CFR 156.170": 365,
	"46 CFR 151.04-5": 730,
	"49 CFR 180.416": 365,
}
