# METADATA
# title: The emergency stop of a road tank was not worked within the month
# description: |
#   The US road rule for liquefied gas wants the emergency discharge controls worked, and the
#   internal valve seen to hold, in each calendar month in service. Two months never have more than
#   62 days, so the last time cannot lie further back than 61.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: ["regime=49 CFR 180.416"]
#   needs: [line.days_since_stop_test]
#   message: >-
#     The stop was last worked {have_days} ago; once in each calendar month leaves {need_days} at
#     most
#   action: "Work the stop, see that it closes, and record the day before the transfer."
#   basis:
#     - document: 49 CFR 180.416
#       edition: "CFR 2015 annual edition"
#       clause: "(d)(3)-(4)"
#       standing: published
package rules.inspection.road_stop_not_worked_monthly

report contains {
	"subject": "line",
	"have_days": input.line.days_since_stop_test,
	"need_days": _longest_days,
} if {
	"49 CFR 180.416" in input.line.regimes
	input.line.days_since_stop_test > _longest_days
}

# From the first day of July to the last of August, or of December to the last of January.
_longest_days := 61
