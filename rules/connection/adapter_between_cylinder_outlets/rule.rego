# METADATA
# title: An adapter joins one cylinder outlet to another
# description: |
#   Outlet numbers keep gases apart. An adapter with a cylinder outlet on both sides undoes that, and
#   lets oxygen meet oil, or a strong cylinder meet a weak regulator.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: parts
#   scope: ["kind=fitting|coupling"]
#   needs: []
#   message: "{part} is an adapter with a cylinder outlet on both sides"
#   action: "Take the adapter out and destroy it. Use the regulator and connector made for the gas."
#   basis:
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(1)(iii)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.connection.adapter_between_cylinder_outlets

report contains {"subject": p.id, "part": p.id} if {
	some p in input.parts
	p.kind in {"coupling", "fitting"}
	count({j.id | some j in input.joints; j.cylinder_outlet; p.id in {j.a, j.b}}) > 1
}
