# METADATA
# title: A cylinder outlet and its connector carry different numbers
# description: |
#   Cylinder outlets are numbered so that each gas and pressure has its own. Several numbers share one
#   thread, so the number, not the thread, decides.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point", cylinder_outlet]
#   needs: [joints.outlet_number]
#   message: "The cylinder outlet numbers of {a} and {b} differ"
#   action: >-
#     Use the connector with the number of the cylinder outlet. Never adapt one cylinder outlet to
#     another.
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
package rules.connection.outlet_number_differs

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.cylinder_outlet
	j.outlet_number == "differs"
}
