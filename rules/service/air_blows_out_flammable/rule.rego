# METADATA
# title: Air would blow out a line that holds a flammable fluid
# description: |
#   Air that pushes a flammable liquid through a line mixes with it on the way, and mist in a hose burns
#   from the smallest spark.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: fluids
#   scope: ["role=flush", air, line.carries_flammable]
#   needs: []
#   message: "The line carries a flammable fluid and is blown out with {name}"
#   action: "Blow the line out with nitrogen, or drain it and flush it with water first."
#   basis:
#     - document: 29 CFR 1910.106
#       edition: ""
#       clause: "(e)(2)(iv)(d)"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.service.air_blows_out_flammable

report contains {"subject": f.id, "name": f.name} if {
	input.line.carries_flammable
	some f in input.fluids
	f.role == "flush"
	f.air
}
