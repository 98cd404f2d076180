# METADATA
# title: The two ends have different classes that do not belong together
# description: |
#   Flanges of different class or PN, or ends of different series, may be bolted or screwed together and
#   still not seat, or leave bolts loose in their holes.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.class]
#   message: "{a} and {b} have different pressure classes or series that do not belong together"
#   action: "Fit ends of the same class, PN or series, or a made-for-purpose transition piece."
#   basis:
#     - document: ASME B16.5
#       edition: ""
#       clause: "drilling of class 150 to 2500"
#       standing: restated
#     - document: EN 1092-1 and ASME B16.5
#       edition: ""
#       clause: "bolt circles and holes compared"
#       standing: computed
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.class_differs

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.class == "differs"
}
