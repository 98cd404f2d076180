# METADATA
# title: A bulk container is pushed with gas and its discharge mark is not stated
# description: |
#   Most intermediate bulk containers take no pressure at all. Only one that carries a mark for it may
#   be emptied by gas.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: vessels
#   scope: [padded]
#   needs: []
#   absent: [vessels.kind, vessels.discharge_limit_kpa]
#   message: "Gas pushes {part}, and the highest discharge pressure marked on it is not stated"
#   action: >-
#     Read the mark and state it as the discharge limit; if there is none, empty the container by a pump
#     and leave it vented.
#   basis:
#     - document: 49 CFR 178.703
#       edition: ""
#       clause: "additional marks"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.discharge_mark_not_stated

report contains {"subject": v.id, "part": v.id} if {
	some v in input.vessels
	v.padded
	v.kind in {"ibc", "tote"}
	not v.discharge_limit_kpa
}
