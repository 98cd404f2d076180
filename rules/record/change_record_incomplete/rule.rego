# METADATA
# title: A change record lacks what the law asks for
# description: |
#   The US rule on process safety wants a change that is not a replacement in kind written down with
#   its technical basis, its effects on safety and health, and the changes to procedures, before the
#   change.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: line
#   scope: [change_not_in_kind, "regime=29 CFR 1910.119"]
#   needs: [line.change_states_basis, line.change_states_effects, line.change_states_procedures]
#   message: "The change record does not state {missing}"
#   action: "Complete the record and have it authorised again before the line is used."
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(l)(2)"
#       standing: published
package rules.record.change_record_incomplete

report contains {"subject": "line", "missing": concat(", ", _missing)} if {
	"29 CFR 1910.119" in input.line.regimes
	input.line.change_not_in_kind
	count(_missing) > 0
}

_missing contains "the technical basis" if input.line.change_states_basis == false

_missing contains "the effects on safety and health" if input.line.change_states_effects == false

_missing contains "the changes to procedures" if input.line.change_states_procedures == false
