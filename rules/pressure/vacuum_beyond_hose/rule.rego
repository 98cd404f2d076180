# METADATA
# title: A hose can be pulled flatter than it stands
# description: |
#   A hose without a helix closes under vacuum, and its liner can come loose. Steam that condenses, or a
#   pump that lifts, pulls as hard as the air pushes.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: [vacuum_likely]
#   needs: [hoses.vacuum_need_kpa, hoses.vacuum_have_kpa]
#   message: "{part} stands {have_kpa} below the air, but {cause} can pull {need_kpa}"
#   action: Fit a hose with a helix rated for that vacuum, or let air or nitrogen in before it can form.
#   basis:
#     - document: EN 12115
#       edition: "2011"
#       clause: vacuum of types D and SD
#       standing: restated
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.pressure.vacuum_beyond_hose

report contains {
	"subject": h.id,
	"part": h.id,
	"cause": h.vacuum_cause,
	"have_kpa": h.vacuum_have_kpa,
	"need_kpa": h.vacuum_need_kpa,
} if {
	some h in input.hoses
	h.vacuum_likely
	h.vacuum_have_kpa < h.vacuum_need_kpa
}
