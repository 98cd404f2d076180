# METADATA
# title: An iron part for ammonia has to be of the right iron
# description: |
#   The US ammonia rule bars cast iron fittings. Malleable, nodular and high-strength gray iron is
#   accepted if the part was made for ammonia; from outside they look alike.
# schemas:
#   - input: schema.facts
# custom:
#   severity: condition
#   subject: pairs
#   scope: ["regime=29 CFR 1910.111"]
#   needs: []
#   message: >-
#     {part} is of iron ({layer}); the ammonia rule accepts only iron parts made for ammonia, never plain
#     cast iron
#   action: >-
#     Read the mark or certificate of the part: ASTM A47, A395, or A126 class B or C, made for ammonia.
#   basis:
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(7)(vi)"
#       standing: published
package rules.material.ammonia_iron_kind_not_shown

report contains {"subject": p.id, "part": p.part, "layer": p.layer} if {
	"29 CFR 1910.111" in input.line.regimes
	some group in {"limited", "suitable", "unlisted"}
	some p in input.pairs[group]
	p.material == "DI"
	startswith(p.fluid, "Ammonia")
}
