# METADATA
# title: A flammable liquid falls through air into the vessel
# description: |
#   A falling jet charges the liquid and makes mist, next to an open hatch where vapour and air mix. A
#   pipe that ends under the surface, or filling from below, avoids both.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: points
#   scope: [target, receives_flammable, receives_liquid, open_point]
#   needs: [points.entry]
#   message: "The flammable liquid falls freely into {vessel} at {point}"
#   action: >-
#     Fill through an earthed dip pipe that reaches the bottom, or from below; start slowly until its end
#     is covered.
#   basis:
#     - document: CSB case study 2008-02-I-IA
#       edition: ""
#       clause: "whole text"
#       standing: published
#     - document: NFPA 77
#       edition: ""
#       clause: "splash filling"
#       standing: recalled
package rules.static.splash_filling

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel} if {
	some p in input.points
	p.target
	p.receives_flammable
	p.receives_liquid
	p.open_point
	p.entry == "splash"
}
