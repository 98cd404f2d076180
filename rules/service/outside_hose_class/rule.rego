# METADATA
# title: A hose carries something its class is not meant for
# description: |
#   The class names the services it is made and tested for, and this fluid is none of them. If the
#   hose's own maker names the fluid in writing, that counts.
# schemas:
#   - input: schema.facts
# custom:
#   severity: stop
#   subject: services
#   scope: ["!ammonia", only_for_stated]
#   needs: [services.class_known]
#   absent: [services.maker_names_it]
#   message: "{part} carries {fluid}, which is outside the service of its class"
#   action: >-
#     Fit a hose whose class covers the fluid, or get the maker's letter that names fluid, strength and
#     temperature.
#   basis:
#     - document: CSB case study 2008-02-I-IA
#       edition: ""
#       clause: "whole text"
#       standing: published
#     - document: common practice
#       edition: ""
#       clause: ""
#       standing: practice
package rules.service.outside_hose_class

report contains {"subject": s.id, "part": s.hose, "fluid": s.fluid} if {
	some s in input.services
	not s.ammonia
	s.class_known == true
	s.only_for_stated
	words := _words(s)
	count(words & {word | some word in s.only_for}) == 0
	count(words & {word | some word in s.not_for}) == 0

	# Where no paper of the maker is stated, none names the fluid: the class decides.
	not s.maker_names_it
}

_words(s) := {word | some word in s.words} | {concat(":", ["fluid", s.fluid_id])}
