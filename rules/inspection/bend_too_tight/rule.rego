# METADATA
# title: A hose is bent tighter than it may be
# description: |
#   A tight bend kinks the liner, opens the braid and takes away burst pressure, mostly right behind the
#   coupling.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: hoses
#   scope: []
#   needs: [hoses.bend_mm, hoses.least_bend_mm]
#   message: "{part} is bent to a radius of {have_mm}; it needs at least {need_mm}"
#   action: "Use a longer hose, an elbow or a support, so that the bend opens up."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.inspection.bend_too_tight

report contains {"subject": h.id, "part": h.id, "have_mm": h.bend_mm, "need_mm": h.least_bend_mm} if {
	some h in input.hoses
	h.bend_mm < h.least_bend_mm
}
