# METADATA
# title: Two fluids that meet on this line react dangerously
# description: |
#   The two come together in the line: as pad gas, flush or test fluid, or as what a former job left
#   behind. What a receiving point holds is judged with the point.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: meetings
#   scope: ["where=pad|flush|previous|test"]
#   needs: [meetings.hazardous]
#   message: "{a} and {b} meet {place}: {outcome}"
#   action: >-
#     Keep the two apart: another gas or flush, another line, or one that is emptied, cleaned and checked
#     in between.
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
#     - document: 46 CFR part 150
#       edition: ""
#       clause: "compatibility of cargoes"
#       standing: recalled
package rules.isolation.fluids_react_dangerously

report contains {
	"subject": m.id,
	"a": m.a,
	"b": m.b,
	"place": _place[m.where],
	"outcome": _outcome(m),
} if {
	some m in input.meetings
	m.hazardous == true
	not _pad_rule_speaks(m)
}

_pad_rule_speaks(m) if m.forbidden_pad

_pad_rule_speaks(m) if m.air_pad

_place := {
	"flush": "in the line, one after the other",
	"pad": "under the pad gas",
	"previous": "in what the last job left behind",
	"test": "when the line is tested",
}

_outcome(m) := m.product if count(m.product) > 0

_outcome(m) := "a dangerous reaction" if count(m.product) == 0
