# METADATA
# title: The gas is not assigned to this cylinder outlet
# description: |
#   A cylinder outlet number belongs to a list of gases. A gas outside the list means the wrong
#   cylinder, the wrong connector or an adapter.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point", cylinder_outlet]
#   needs: [joints.gas_listed]
#   message: "The cylinder outlet at {a} and {b} is not assigned to the gas the line carries"
#   action: "Check which gas the cylinder holds; then use the outlet and connector assigned to it. Never adapt."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(1)(iii)"
#       standing: published
#     - document: CGA V-1
#       edition: ""
#       clause: "outlet table"
#       standing: recalled
#     - document: DIN 477-1
#       edition: "not stated in the table read"
#       clause: "outlet table"
#       standing: restated
package rules.connection.gas_not_assigned_to_outlet

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.cylinder_outlet
	j.gas_listed == false
}
