# METADATA
# title: A joint that needs a seal has none
# description: |
#   A coupling without its gasket, or a cylinder outlet without its washer, leaks at the first pressure.
#   It is the commonest fault of a joint.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.needs_seal, joints.seal_count]
#   message: "The joint of {a} and {b} needs a seal and has none"
#   action: >-
#     Fit the seal the connection standard asks for, new where it is used only once, and enter it in the
#     sheet.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.seal.missing

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.needs_seal == true
	j.seal_count == 0
}
