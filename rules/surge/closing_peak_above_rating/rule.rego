# METADATA
# title: A device that closes sends back more pressure than a part holds
# description: |
#   Stopping a moving liquid in a moment turns its speed into pressure. A valve that snaps shut can add
#   tens of bar for a few milliseconds, and each stroke does it again.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: surges
#   scope: []
#   needs: [surges.peak_kpa, surges.weakest_kpa]
#   message: "When {device} closes, the pressure before it peaks at {need_kpa}; {part} holds {have_kpa}"
#   action: "Close more slowly and state the closing time, lower the flow, or fit parts that hold the peak."
#   basis:
#     - document: Wylie and Streeter, Fluid Transients
#       edition: ""
#       clause: "Joukowsky and Michaud equations"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.surge.closing_peak_above_rating

report contains {
	"subject": s.id,
	"part": s.weakest,
	"case": "surge",
	"device": s.id,
	"have_kpa": s.weakest_kpa,
	"need_kpa": s.peak_kpa,
} if {
	some s in input.surges
	s.peak_kpa > s.weakest_kpa
}
