# METADATA
# title: A point for another fluid takes the same coupling
# description: |
#   The two fluids do not react dangerously, but a mistake spoils both and may overfill a vessel nobody
#   watches.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: points
#   scope: ["!target", "!keyed"]
#   needs: []
#   absent: [points.coupling, points.hazardous, points.padlocked, points.same_fluid]
#   message: "{point} of {vessel} is in reach, is for another fluid and takes the same coupling"
#   action: "Lock or key the point, and have the receiver show the right one."
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.identity.other_fluid_takes_same_coupling

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel} if {
	some p in input.points
	not p.target
	p.same_fluid == false
	p.hazardous == false
	p.coupling == "same"
	not p.keyed

	# A padlock that nobody has stated is not counted.
	not p.padlocked
}
