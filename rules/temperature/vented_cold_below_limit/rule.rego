# METADATA
# title: Letting a liquefied gas off to the air chills a part below its limit
# description: |
#   A liquefied gas that is let down to the air boils and cools itself to its boiling point, often far
#   below any weather. What it touches then turns brittle.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: limits
#   scope: ["line.carries_liquefied_gas"]
#   needs: [limits.lowest_ck]
#   absent: [limits.vented_ck]
#   message: >-
#     {part} ({what}) is good down to {have_ck}; let off to the air, the liquefied gas chills it to
#     {need_ck}
#   action: >-
#     Let the pressure off slowly and from the vapour side, let the part warm up before it is moved or
#     pressed again, or fit a part made for this cold.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.temperature.vented_cold_below_limit

report contains {
	"subject": l.id,
	"part": l.part,
	"what": l.what,
	"have_ck": l.lowest_ck,
	"need_ck": l.vented_ck,
} if {
	input.line.carries_liquefied_gas
	some l in input.limits
	l.vented_ck < l.lowest_ck
}
