# METADATA
# title: Liquid shut in between two devices breaks the weakest part when it warms
# description: |
#   A stretch full of liquid has nowhere to expand. Each degree adds several bar in pipe, so an hour of
#   sun is enough; nobody need do anything wrong but close both ends.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: sections
#   scope: [liquid, "!relieved", "!drained", warmed]
#   needs: [sections.blocked_kpa, sections.weakest_kpa]
#   message: >-
#     Liquid shut in between {from} and {to} reaches {need_kpa} when it warms; {part} holds {have_kpa}
#   action: >-
#     Fit a thermal relief device between the two that leads to a safe place, or empty the run after every
#     transfer, or leave one end open so that it cannot be shut by mistake.
#   basis:
#     - document: API Std 521
#       edition: "5th edition, 2007"
#       clause: "5.14.4"
#       standing: published
package rules.expansion.trapped_liquid_above_rating

report contains {
	"subject": s.id,
	"part": s.weakest,
	"case": "shut-in-liquid",
	"from": s.from,
	"to": s.to,
	"have_kpa": s.weakest_kpa,
	"need_kpa": s.blocked_kpa,
} if {
	some s in input.sections
	s.liquid
	not s.relieved
	not s.drained
	s.warmed
	s.blocked_kpa > s.weakest_kpa
}
