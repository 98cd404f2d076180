# METADATA
# title: A left-hand thread faces a right-hand thread
# description: |
#   The hand of a thread keeps families of gases apart. Threads of different hand do not run up unless
#   they are forced or adapted, and then the safeguard is gone.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.hand]
#   message: "The threads of {a} and {b} turn in different directions"
#   action: "Check the gas first: the hand is there to stop a wrong connection. Then fit ends of the same hand."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
#     - document: DIN 477-1
#       edition: "not stated in the table read"
#       clause: "outlet table"
#       standing: restated
package rules.connection.hand_differs

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.hand == "differs"
}
