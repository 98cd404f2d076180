# METADATA
# title: A bulk container is emptied by gas and its discharge limit is not stated
# description: |
#   An intermediate bulk container carries on its plate how much pressure it may be emptied with, if
#   any. Without the mark nobody can say whether the pad gas is too high.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: vessels
#   scope: [padded]
#   needs: []
#   absent: [vessels.discharge_limit_kpa, vessels.kind]
#   message: "{vessel} is emptied with gas, and the highest discharge pressure marked on it is not stated"
#   action: >-
#     Read the plate of the container and write its discharge limit in the sheet. Without one, empty it by
#     pump.
#   basis:
#     - document: 49 CFR 178.703
#       edition: ""
#       clause: "marking of intermediate bulk containers"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.record.discharge_limit_not_stated

report contains {"subject": v.id, "vessel": v.id} if {
	some v in input.vessels
	v.padded
	v.kind in {"ibc", "tote"}

	# Nobody may read a missing mark as a strong container.
	not v.discharge_limit_kpa
}
