# METADATA
# title: A material suits the fluid only within limits
# description: |
#   The material holds out for a time, up to a temperature, or as a static seal only. Whoever approves
#   the line has to know the limit and see that it is kept.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: pairs
#   scope: []
#   needs: [pairs.rating]
#   message: "{material} in {part} ({layer}) suits {fluid} only within limits: {effect}"
#   action: >-
#     Write the limit into the job card: shorter contact, lower temperature, earlier change or a soak
#     test, or choose a material rated suitable.
#   basis:
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.material.limited_use

report contains {
	"subject": p.id,
	"part": p.part,
	"layer": p.layer,
	"material": p.material,
	"fluid": p.fluid,
	"effect": p.effect,
} if {
	some p in input.pairs.limited
}
