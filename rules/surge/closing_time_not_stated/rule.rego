# METADATA
# title: The closing time of a device is not stated
# description: |
#   It counts as closing at once, which gives the highest peak. Where the line holds even that, the time
#   does not matter.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: surges
#   scope: ["!closing_stated"]
#   needs: []
#   absent: [surges.peak_kpa, surges.weakest_kpa]
#   message: "The closing time of {part} is not stated, so it counts as closing at once"
#   action: "State the closing time of the device, by its maker or measured."
#   basis:
#     - document: Wylie and Streeter, Fluid Transients
#       edition: ""
#       clause: "Joukowsky and Michaud equations"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.surge.closing_time_not_stated

report contains {"subject": s.id, "part": s.id} if {
	some s in input.surges
	not s.closing_stated
	not _holds(s)
}

_holds(s) if s.peak_kpa <= s.weakest_kpa
