# METADATA
# title: Two connection standards do not join
# description: |
#   The two ends are made to standards that do not fit each other. A joint could only be made with an
#   adapter, and an adapter is a part that has to be approved.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.mate]
#   message: "{a} and {b} are made to standards that do not join"
#   action: "Fit ends of one standard, or enter the adapter in the sheet as a part with two joints of its own."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.does_not_join

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.mate == "no-fit"
}
