# METADATA
# title: The planned quantity leaves hardly any gas space in the destination
# description: |
#   Level readings err, the hose still drains, and a liquid that warms needs room. A twentieth of the
#   volume is commonly kept free.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: vessels
#   scope: [is_target, quantity_stated]
#   needs: [vessels.after_permille]
#   message: >-
#     After the planned quantity {part} would be {have_permille} full; {need_permille} is commonly the
#     most
#   action: "Deliver less, or watch the level with somebody at the stop valve for the last part."
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.flow.leaves_no_ullage

report contains {"subject": v.id, "part": v.id, "have_permille": v.after_permille, "need_permille": 950} if {
	some v in input.vessels
	v.is_target
	v.quantity_stated
	v.after_permille > 950

	# More than full is the matter of another rule.
	v.after_permille <= 1000
}
