# METADATA
# title: A loose metal part is not bonded where a flammable fluid meets open air
# description: |
#   Metal that hangs free, such as a nozzle, coupling or weight on a hose, takes up charge from the flow
#   and sparks to the vessel. This happens even when the liquid itself holds no charge.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: parts
#   scope: [carries_flammable, at_open_point]
#   needs: [parts.conductor, parts.bonded]
#   message: "{part} is metal, is not bonded to earth, and works at an open point with a flammable fluid"
#   action: "Bond the part to the vessel and to earth, measure the bond, and only then start the flow."
#   basis:
#     - document: CSB case study 2008-02-I-IA
#       edition: ""
#       clause: "whole text"
#       standing: published
#     - document: NFPA 77
#       edition: ""
#       clause: "bonding"
#       standing: recalled
package rules.static.isolated_conductor_at_open_point

report contains {"subject": p.id, "part": p.id} if {
	some p in input.parts
	p.carries_flammable
	p.at_open_point
	p.conductor == true
	p.bonded == false
}
