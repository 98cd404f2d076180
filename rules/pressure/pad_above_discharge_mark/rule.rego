# METADATA
# title: The gas pushes harder than the container is marked for
# description: |
#   An intermediate bulk container or tank that may be emptied by pressure carries a mark with the most
#   it takes. Above that the shell bulges or tears.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [padded]
#   needs: [vessels.pad_kpa]
#   absent: [vessels.discharge_limit_kpa]
#   message: "The gas pushes with up to {need_kpa}; {part} is marked for {have_kpa}"
#   action: "Lower the gas pressure and limit it with a relief device, or empty the container by a pump."
#   basis:
#     - document: 49 CFR 178.703
#       edition: ""
#       clause: "additional marks"
#       standing: recalled
package rules.pressure.pad_above_discharge_mark

report contains {
	"subject": v.id,
	"part": v.id,
	"have_kpa": v.discharge_limit_kpa,
	"need_kpa": v.pad_kpa,
} if {
	some v in input.vessels
	v.padded
	v.pad_kpa > v.discharge_limit_kpa
}
