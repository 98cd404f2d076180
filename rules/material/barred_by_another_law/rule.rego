# METADATA
# title: A law that does not apply here bars this material for the fluid
# description: |
#   The law was written for ships, barges or road tanks, but the chemistry is the same. It is strong
#   evidence against the material.
# schemas:
#   - input: schema.facts
# custom:
#   severity: note
#   subject: bars
#   scope: [barred, "!regime_applies"]
#   needs: []
#   message: "{material} in {part} is barred for {fluid} by {regime}, a law this line does not come under: {why}"
#   action: "Prefer a material that law accepts, or record why this one is safe here."
#   basis:
#     - document: 49 CFR 173.315
#       edition: "CFR 2015 annual edition"
#       clause: "(a)(2) notes 4, 12, 13 and 14"
#       standing: published
#     - document: 29 CFR 1910.111
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(7)"
#       standing: published
#     - document: 46 CFR 153.236
#       edition: "CFR 2015 annual edition"
#       clause: "(a) to (g)"
#       standing: published
#     - document: 46 CFR 154.1702
#       edition: "CFR 2015 annual edition"
#       clause: "(a) to (f)"
#       standing: published
#     - document: 46 CFR 56.50-103
#       edition: "CFR 2015 annual edition"
#       clause: "acetylene"
#       standing: published
package rules.material.barred_by_another_law

report contains {
	"subject": b.id,
	"part": b.part,
	"material": b.material,
	"fluid": b.fluid,
	"regime": b.regime,
	"why": b.why,
} if {
	some b in input.bars
	b.barred
	not b.regime_applies
}
