# METADATA
# title: A material that touches the fluid is not fit for it
# description: |
#   The fluid swells, dissolves, cracks or corrodes the material, or reacts with it. The part fails
#   sooner or later, and often without warning.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: pairs
#   scope: ["contact=wetted"]
#   needs: [pairs.rating]
#   message: "{material} in {part} ({layer}) is not fit for {fluid}: {effect}"
#   action: >-
#     Fit a part whose wetted materials are all rated suitable for this fluid at its strength and
#     temperature.
#   basis:
#     - document: 29 CFR 1910.119
#       edition: "CFR 2015 annual edition"
#       clause: "(j)(6)(iii)"
#       standing: published
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(7)(v)"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.material.unsuitable_for_fluid

report contains {
	"subject": p.id,
	"part": p.part,
	"layer": p.layer,
	"material": p.material,
	"fluid": p.fluid,
	"effect": p.effect,
} if {
	some p in input.pairs.unsuitable
	p.contact == "wetted"
}
