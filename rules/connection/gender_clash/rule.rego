# METADATA
# title: Two ends of the same gender face each other
# description: |
#   Two male or two female ends cannot make a joint. What is fitted between them in the field is an
#   adapter that nobody approved.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.gender]
#   message: "{a} and {b} are of the same gender and cannot make a joint"
#   action: "Turn the hose round, order the right end, or enter the adapter in the sheet as a part of its own."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.gender_clash

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.gender == "same"
}
