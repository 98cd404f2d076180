# METADATA
# title: A closed vessel can be pulled flatter than it stands
# description: |
#   Steam that condenses, or a warm filling that cools, leaves less than the air's pressure in a closed vessel.
#   A thin shell caves in at a few hundredths of a bar.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: vessels
#   scope: [vacuum_likely]
#   needs: [vessels.vacuum_need_kpa, vessels.vacuum_have_kpa]
#   message: "{part} stands {have_kpa} below the air, but {cause} can pull {need_kpa}"
#   action: >-
#     Open a vent or fit a vacuum breaker of enough size, or let gas in as it cools; or use a vessel
#     rated for it.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.vacuum_beyond_vessel

report contains {
	"subject": v.id,
	"part": v.id,
	"cause": v.vacuum_cause,
	"have_kpa": v.vacuum_have_kpa,
	"need_kpa": v.vacuum_need_kpa,
} if {
	some v in input.vessels
	v.vacuum_likely
	v.vacuum_have_kpa < v.vacuum_need_kpa
}
