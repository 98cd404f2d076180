# METADATA
# title: A change was made without a recorded review
# description: |
#   Anything that is not a replacement in kind needs a written and authorised change record before it is
#   used. A hose that looked the same was such a change in more than one accident.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: [changed]
#   needs: [line.change_in_kind]
#   absent: [line.change_authorised_day]
#   message: "The line was changed, not in kind, and {gap}"
#   action: >-
#     Write the change record, with technical basis, effect on safety and time limit, and have it
#     authorised before use.
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(l)(1)-(2)"
#       standing: published
#     - document: NTSB HAZ-12-01-SUM
#       edition: ""
#       clause: "letters H-12-2 to H-12-6"
#       standing: published
package rules.record.change_without_review

report contains {"subject": "line", "gap": _gap} if {
	input.line.changed
	input.line.change_in_kind == false
}

_gap := "no change record is named" if not input.line.change_record

_gap := "its record shows no authorisation up to this day" if {
	input.line.change_record
	not _authorised
}

# A change without a date is one that nobody has authorised.
_authorised if input.line.change_authorised_day <= input.line.as_of_day
