# METADATA
# title: The receiving point carries no label
# description: |
#   No other point is known to be in reach, so the hose can hardly go wrong. A label still guards
#   against the wrong delivery.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: points
#   scope: [target, "!neighbours_stated"]
#   needs: [points.marked]
#   absent: [points.hazardous]
#   message: "{point} of {vessel} carries no label"
#   action: "Label the point with the full name of its fluid, and look whether another point can be reached."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.marking.lone_point_unmarked

report contains {"subject": p.id, "point": p.id, "vessel": p.vessel} if {
	some p in input.points
	p.target
	not p.neighbours_stated
	p.marked == false
	not p.hazardous
}
