# METADATA
# title: A favourable value is known only from memory, practice or an unnamed paper
# description: |
#   The value may well be right, but nobody has read it in the document. The line is not cleared on it
#   alone.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: values
#   scope: ["standing=recalled|practice|stated"]
#   needs: []
#   message: "{what} is known only from {how}: confirm it in {where}"
#   action: >-
#     Read the value in the document, or on the part's plate or certificate, and write that evidence in
#     the line sheet.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.record.value_not_confirmed

report contains {
	"subject": v.id,
	"what": v.what,
	"how": _how[v.standing],
	"where": _where(v),
	"used_by": concat(", ", v.used_by),
} if {
	some v in input.values
}

_how := {"recalled": "memory", "practice": "common practice", "stated": "the sheet"}

_where(v) := trim_space(concat(" ", [v.source, v.clause])) if v.standing == "recalled"

_where(v) := "the maker's papers" if v.standing == "practice"

_where(v) := "a plate, certificate or maker's paper, and name it under evidence" if v.standing == "stated"
