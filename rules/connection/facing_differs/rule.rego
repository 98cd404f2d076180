# METADATA
# title: The two sealing faces do not belong together
# description: |
#   A gasket seals only between the faces it was made for. A raised face against a flat cast or plastic
#   flange can crack it, and a tongue needs its groove.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.facing]
#   message: "The sealing faces of {a} and {b} do not belong together"
#   action: "Fit flanges or ends with matching faces and the gasket made for them."
#   basis:
#     - document: ASME B16.5
#       edition: ""
#       clause: "clause 6.4"
#       standing: recalled
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.facing_differs

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.facing == "differs"
}
