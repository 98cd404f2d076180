# METADATA
# title: Two ends of different size face each other
# description: |
#   Ends of different size leak, part under pressure, or are forced together with the wrong tool.
#   Neighbouring sizes, such as 50 and 51 mm or 76 and 80 mm, are easily confused.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: joints
#   scope: ["!open_point"]
#   needs: [joints.size]
#   message: "{a} and {b} are of different size"
#   action: "Use ends of the same size, or a reducer that is entered in the sheet as a part of its own."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.size_differs

report contains {"subject": j.id, "a": j.a, "b": j.b} if {
	some j in input.joints
	not j.open_point
	j.size == "differs"
}
