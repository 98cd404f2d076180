# METADATA
# title: The emergency shutdown of a waterfront transfer is not tested in time
# description: |
#   The US rule for liquefied hazardous gas at the waterfront wants the emergency shutdown tested
#   every two months, which are 62 days at most.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: ["regime=33 CFR 127.1407|33 CFR 127.1102"]
#   needs: [line.days_since_stop_test]
#   message: "The stop was last worked {have_days} ago; the law leaves {need_days} at most"
#   action: "Work the stop, see that it closes, and record the day before the transfer."
#   basis:
#     - document: 33 CFR 127.1407
#       edition: "CFR 2015 annual edition"
#       clause: "whole section"
#       standing: published
package rules.inspection.waterfront_stop_test_overdue

report contains {
	"subject": "line",
	"have_days": input.line.days_since_stop_test,
	"need_days": _longest_days,
} if {
	some regime in {"33 CFR 127.1407", "33 CFR 127.1102"}
	regime in input.line.regimes
	input.line.days_since_stop_test > _longest_days
}

# From the first day of July to the last of August, or of December to the last of January.
_longest_days := 62
