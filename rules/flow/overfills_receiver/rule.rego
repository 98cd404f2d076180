# METADATA
# title: The planned quantity does not fit into the destination
# description: |
#   More is to be delivered than there is room for. What does not fit comes out of the vent, the hatch
#   or the relief device.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [is_target, quantity_stated]
#   needs: [vessels.after_permille]
#   message: "After the planned quantity {part} would be {have_permille} full, over {need_permille}"
#   action: "Deliver less, or make room first; read the level before the transfer starts."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.flow.overfills_receiver

report contains {"subject": v.id, "part": v.id, "have_permille": v.after_permille, "need_permille": 1000} if {
	some v in input.vessels
	v.is_target
	v.quantity_stated
	v.after_permille > 1000
}
