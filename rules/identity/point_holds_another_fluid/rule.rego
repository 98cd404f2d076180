# METADATA
# title: The receiving point is meant for another fluid
# description: |
#   The vessel behind this point is for something else than this run carries. Even a harmless mix spoils
#   both.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: points
#   scope: [target]
#   needs: [points.same_fluid]
#   message: "{vessel} at {point} is not for what this run carries"
#   action: "Stop and find the right point. Have the receiver confirm fluid and point before coupling."
#   basis:
#     - document: CSB case study, mixed chemicals at a Kansas plant in 2016
#       edition: "January 2018"
#       clause: "whole text"
#       standing: published
package rules.identity.point_holds_another_fluid

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel} if {
	some p in input.points
	p.target
	p.same_fluid == false
}
