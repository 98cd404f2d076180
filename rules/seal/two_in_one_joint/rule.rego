# METADATA
# title: A joint holds more than one seal
# description: |
#   Two washers or gaskets in one joint slide on each other and are not pressed evenly. An old seal left
#   in place is the usual cause.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.seal_count]
#   message: "The joint of {a} and {b} holds {have_count} seals; it takes {need_count}"
#   action: "Take all seals out, clean both faces and fit one seal of the right kind."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.seal.two_in_one_joint

report contains {"subject": j.id, "a": j.a, "b": j.b, "have_count": j.seal_count, "need_count": 1} if {
	some j in input.joints
	not j.open_point
	j.seal_count > 1
}
