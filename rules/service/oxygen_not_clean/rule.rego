# METADATA
# title: A part that carries oxygen is not cleaned for it
# description: |
#   Oil, grease and dirt catch fire in oxygen, set off by the heat of sudden pressure alone.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: parts
#   scope: [carries_oxygen]
#   needs: [parts.oxygen_clean]
#   message: "{part} carries oxygen and is not cleaned for oxygen"
#   action: "Clean the part for oxygen, keep the record, seal it until use, and touch it with clean gloves only."
#   basis:
#     - document: 29 CFR 1910.104
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(8)(i)"
#       standing: published
#     - document: 29 CFR 1910.253
#       edition: "CFR 2015 annual edition"
#       clause: "(b)(5)(i)"
#       standing: published
package rules.service.oxygen_not_clean

report contains {"subject": p.id, "part": p.id} if {
	some p in input.parts
	p.carries_oxygen
	p.oxygen_clean == false
}
