# METADATA
# title: A hose carries a service that its class excludes
# description: |
#   The standard of this hose, or the law, names this service as one the hose must not be used for.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: services
#   scope: ["!ammonia"]
#   needs: [services.class_known]
#   message: "{part} carries {fluid}, and its class must not be used for: {excluded}"
#   action: "Fit a hose of a class made for this service."
#   basis:
#     - document: CSB case study 2008-02-I-IA
#       edition: ""
#       clause: "whole text"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.service.kept_out_by_class

report contains {"subject": s.id, "part": s.hose, "fluid": s.fluid, "excluded": concat(", ", excluded)} if {
	some s in input.services
	not s.ammonia
	s.class_known == true
	excluded := _words(s) & {word | some word in s.not_for}
	count(excluded) > 0
}

_words(s) := {word | some word in s.words} | {concat(":", ["fluid", s.fluid_id])}
